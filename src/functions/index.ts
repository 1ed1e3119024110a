import { catalogue, type FunctionId } from "../catalogue";
import * as application from "./application";
import * as bill from "./bill";
import * as check from "./check";
import * as cost from "./cost";
import * as crop from "./crop";
import * as drain from "./drain";
import * as et from "./et";
import { exportNameOf } from "./export-name";
import * as feeder from "./feeder";
import * as field from "./field";
import * as flush from "./flush";
import * as lateral from "./lateral";
import * as pipe from "./pipe";
import * as plan from "./plan";
import * as planDrawing from "./plan-drawing";
import * as pump from "./pump";
import * as set from "./set";
import * as soil from "./soil";
import * as source from "./source";
import * as sprinkler from "./sprinkler";
import * as stake from "./stake";
import * as system from "./system";
import * as tow from "./tow";
import * as unit from "./unit";
import * as water from "./water";

type SheetFunction = (...cells: never[]) => unknown;

const families: Readonly<Record<string, SheetFunction>> = {
  ...application,
  ...bill,
  ...check,
  ...cost,
  ...crop,
  ...drain,
  ...et,
  ...feeder,
  ...field,
  ...flush,
  ...lateral,
  ...pipe,
  ...plan,
  ...planDrawing,
  ...pump,
  ...set,
  ...soil,
  ...source,
  ...sprinkler,
  ...stake,
  ...system,
  ...tow,
  ...unit,
  ...water,
};

/** Every landed function by its id. */
export const sheetFunctions: ReadonlyMap<FunctionId, SheetFunction> = new Map(
  catalogue.map((id) => {
    const sheetFunction = families[exportNameOf(id)];
    if (sheetFunction === undefined)
      throw new Error(`no function is exported as ${exportNameOf(id)}`);
    return [id, sheetFunction];
  }),
);
