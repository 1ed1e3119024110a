/**
 * The ids of the functions that have landed. The build fails unless it finds exactly these in the
 * doc comments, so that a function can neither slip out nor slip in unnoticed.
 */
export const catalogue = [
  // UNIT
  // PIPE
  "PIPE_FRICTION",
  "PIPE_VELOCITY",
  "PIPE_FITTING",
  "PIPE_SIZE",
  "PIPE_MAXFLOW",
  "PIPE_VOLUME",
  // WATER
  // SPRINKLER
  "SPRINKLER_FLOW",
  "SPRINKLER_PRESSURE",
  "SPRINKLER_NOZZLE",
  "SPRINKLER_K",
  "SPRINKLER_SPACING",
  // LATERAL
  // FEEDER
  "FEEDER_LENGTH",
  "FEEDER_PRESSURE",
  // PUMP
  "PUMP_TDH",
  "PUMP_POWER",
  "PUMP_ENERGY",
  "PUMP_DUTY",
  "PUMP_STATIC",
  // SOURCE
  "SOURCE_DAYS",
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
