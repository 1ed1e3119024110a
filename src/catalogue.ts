/**
 * The ids of the functions that have landed. The build fails unless it finds exactly these in the
 * doc comments, so that a function can neither slip out nor slip in unnoticed.
 */
export const catalogue = [
  // UNIT
  "UNIT_CONVERT",
  // PIPE
  "PIPE_FRICTION",
  "PIPE_VELOCITY",
  "PIPE_FITTING",
  "PIPE_SIZE",
  "PIPE_MAXFLOW",
  "PIPE_VOLUME",
  "PIPE_INSIDE",
  "PIPE_RATING",
  "PIPE_SURGE",
  // WATER
  "WATER_VISCOSITY",
  "WATER_DENSITY",
  "WATER_VAPOR",
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
  "PUMP_NPSH",
  "PUMP_ENERGY",
  "PUMP_DUTY",
  "PUMP_STATIC",
  // SOURCE
  "SOURCE_DAYS",
  // APPLICATION
  "APPLICATION_RATE",
  "APPLICATION_DEPTH",
  "APPLICATION_CATCH",
  "APPLICATION_CU",
  "APPLICATION_DU",
  "APPLICATION_OVERLAP",
  "APPLICATION_FOLD",
  "APPLICATION_COARSENESS",
  "APPLICATION_EFFECTIVE",
  "APPLICATION_EFFICIENCY",
  // SET
  "SET_TIME",
  "SET_PERDAY",
  "SET_POSITIONS",
  "SET_PLAN",
  // SYSTEM
  "SYSTEM_CAPACITY",
  "SYSTEM_INTERVAL",
  "SYSTEM_LINES",
  "SYSTEM_VOLUME",
  // SOIL
  "SOIL_AWC",
  "SOIL_PROFILE",
  "SOIL_INTAKE",
  "SOIL_NET",
  // CROP
  "CROP_ROOT",
  "CROP_DEPLETION",
  "CROP_KC",
  // ET
  "ET_REFERENCE",
  "ET_HARGREAVES",
  "ET_DEWPOINT",
  "ET_WIND2M",
  "ET_SOLAR",
  "ET_RADIATION",
  // FLUSH
  "FLUSH_FLOW",
  "FLUSH_TIME",
  // DRAIN
  "DRAIN_VOLUME",
  "DRAIN_TRAPPED",
  "DRAIN_TIME",
  // TOW
  // STAKE
  // BILL
  // CHECK
] as const;

export type FunctionId = (typeof catalogue)[number];
