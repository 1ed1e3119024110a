/**
 * The ids of the functions that have landed. The build fails unless it finds exactly these in the
 * doc comments, so that a function can neither slip out nor slip in unnoticed.
 */
export const catalogue = [
  // UNIT
  // PIPE
  "PIPE_FRICTION",
  // WATER
  // SPRINKLER
  // LATERAL
  // FEEDER
  // PUMP
  // SOURCE
  // APPLICATION
  "APPLICATION_RATE",
  "APPLICATION_DEPTH",
  // SET
  "SET_TIME",
  // SYSTEM
  // SOIL
  // CROP
  // ET
  // FLUSH
  // DRAIN
  "DRAIN_VOLUME",
  // TOW
  // STAKE
  // BILL
  // CHECK
] as const;

export type FunctionId = (typeof catalogue)[number];
