import { callNumber, callTable } from "../support/host";
import { expectClose, published } from "../support/published";

published(
  {
    source: "A water balance",
    where: "500 000 gal, 100 gpm for 12 h a day, 10 gpm running in: 500 000/(72 000 − 14 400) days",
    seen: "closed form",
  },
  () => {
    expectClose(callNumber("SOURCE.DAYS", 500000, 100, 12, "US", 10), 500000 / 57600, 1e-12);
    expectClose(callNumber("SOURCE.DAYS", 6000, 25, 10, "SI", 2), 6000 / (250 - 48), 1e-12);
  },
);

published(
  {
    source: "A water balance",
    where: "full at 100, 10 a month in, needs of 80, 30 and 40: 30, then 10, then 20 short",
    seen: "closed form",
  },
  () => {
    for (const units of ["US", "SI"]) {
      const table = callTable("SOURCE.BALANCE", 100, [[80], [30], [40]], units, 10);
      const printed = [1, 30, 0, 0, 2, 10, 0, 0, 3, 0, 20, 0];
      printed.forEach((value, i) => expectClose(table.slice(1).flat()[i], value, 1e-12));
    }
  },
);
