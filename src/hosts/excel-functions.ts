import { guardedFunctions } from "../functions/guarded";
import { inExcel } from "./excel";

/** The entry of functions.js: hands every function to the host under its id. */
for (const [id, guarded] of guardedFunctions) CustomFunctions.associate(id, inExcel(guarded));
