/** The one door to the grid library, so that its size lands in one lazily loaded chunk. */
export * from "@univerjs/preset-sheets-core";
export {
  BooleanNumber,
  BorderStyleTypes,
  CellValueType,
  ICommandService,
  HorizontalAlign,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
export { FUniver } from "@univerjs/core/lib/facade";
export { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";
