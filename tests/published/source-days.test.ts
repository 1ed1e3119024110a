import { callNumber } from "../support/host";
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
