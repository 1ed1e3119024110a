import { inExcel } from "../hosts/excel";
import { guardedFunctions } from "./guarded";

/** The entry of functions.js: hands every function to the host under its id. */
for (const [id, guarded] of guardedFunctions) CustomFunctions.associate(id, inExcel(guarded));
