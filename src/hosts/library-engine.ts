/** The entry of the library's engine: every function by its id, and the error that it throws. */
export { CellError } from "../boundary/guard";
export { guardedFunctions } from "../functions/guarded";
