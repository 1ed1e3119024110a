import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "New Mexico State University, Soils 456 notes, chapter 5",
    where: "precipitation rate P = 96.3 q/A: 12.5 gpm on 40 ft by 60 ft, by hand 0.50 in/h",
    seen: "read",
  },
  () => {
    const rate = callNumber("APPLICATION.RATE", 12.5, 40, 60, "US");
    expectWithin(rate, 0.5, 0.005);
    // The printed constant is 96.25 rounded up: 0.05 % between the two.
    expectClose(rate, (96.3 * 12.5) / (40 * 60), 0.0006);
  },
);

published(
  {
    source: "Sprinkler Precipitation Rates (teaching slides on the total-area method)",
    where: "sample problem: 8.0 gpm on 60 ft by 15 ft, 96.25 × 8/900 = 0.86 in/h",
    seen: "read in a secondary text",
  },
  () => {
    const rate = callNumber("APPLICATION.RATE", 8, 60, 15, "US");
    expectWithin(rate, 0.86, 0.005);
    expectClose(rate, (96.25 * 8) / 900, 1e-12);
  },
);

published(
  {
    source: "Depth is volume over area: 1 m³ on 1000 m² is 1 mm",
    where: "3.6 m³/h on 18 m by 20 m is 10 mm/h",
    seen: "closed form",
  },
  () => {
    expectClose(callNumber("APPLICATION.RATE", 3.6, 18, 20, "SI"), 10, 1e-12);
  },
);

published(
  {
    source: "Gross depth is net depth over the efficiency, and depth is rate times time",
    where: "2.4 in net at 70 % is 3.43 in gross, 6.86 h at 0.5 in/h",
    seen: "closed form",
  },
  () => {
    const hours = callNumber("SET.TIME", 2.4, 0.5, 0.7);
    expectWithin(callNumber("APPLICATION.DEPTH", 0.5, hours), 3.43, 0.005);
    expectClose(callNumber("APPLICATION.DEPTH", 0.5, hours, 0.7), 2.4, 1e-12);
    expectWithin(hours, 6.86, 0.005);
  },
);
