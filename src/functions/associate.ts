import { guard } from "../boundary/guard";
import { sheetFunctions } from "./index";

/** The entry of functions.js: hands every function to the host under its id. */
for (const [id, sheetFunction] of sheetFunctions)
  CustomFunctions.associate(id, guard(sheetFunction));
