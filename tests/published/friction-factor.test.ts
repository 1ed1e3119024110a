import { frictionFactor, reynoldsNumber } from "../../src/formulas/darcy-weisbach";
import { callNumber } from "../support/host";
import { expectClose, expectWithin, published } from "../support/published";

published(
  {
    source: "Python library fluids 1.3.1, its test of the Colebrook equation (test_friction.py)",
    where: "Re 1e5, relative roughness 1e-4, printed to 15 digits",
    seen: "read in a secondary text",
    guards: ["PIPE.FRICTION", "LATERAL.PRESSURE"],
  },
  () => {
    expectClose(frictionFactor(1e5, 1e-4), 0.018513866077471648, 1e-12);
  },
);

published(
  {
    source: "Python library fluids 1.3.1, Colebrook solved",
    where: "friction factors over Reynolds number and relative roughness",
    seen: "independent engine",
    guards: ["PIPE.FRICTION", "LATERAL.PRESSURE"],
  },
  () => {
    expectWithin(frictionFactor(1e4, 0), 0.030883, 0.000001);
    expectWithin(frictionFactor(1e5, 0), 0.01799, 0.000001);
    expectWithin(frictionFactor(1e5, 1e-4), 0.018514, 0.000001);
    expectWithin(frictionFactor(1e5, 1e-3), 0.022175, 0.000001);
    expectWithin(frictionFactor(1e6, 1e-4), 0.013441, 0.000001);
    expectWithin(frictionFactor(1e6, 1e-2), 0.037965, 0.000001);
  },
);

published(
  {
    source: "Crane Technical Paper 410",
    where: "Example 7.1: water at 30 °C, 200 L/min in a smooth 52.5 mm bore, f = 0.0179",
    seen: "read in a secondary text",
    guards: ["PIPE.FRICTION"],
  },
  () => {
    const reynolds = reynoldsNumber(0.2 / 60, 0.0525, 0.8007e-6);
    expectClose(reynolds, 100600, 0.005);
    expectWithin(frictionFactor(reynolds, 0), 0.0179, 0.0001);
  },
);

published(
  {
    source: "Hagen–Poiseuille, laminar flow",
    where: "f = 64/Re, so that pressure lost is 128 μ L Q/(π D⁴)",
    seen: "closed form",
  },
  () => {
    expectClose(frictionFactor(1000, 1e-3), 0.064, 1e-12);
    // 0.02 m³/h in a 20 mm bore: Re about 350.
    const flow = 0.02 / 3600;
    const dynamicViscosity = 1.0034e-6 * 998.2;
    const pressure = (128 * dynamicViscosity * 100 * flow) / (Math.PI * 0.02 ** 4);
    expectClose(callNumber("PIPE.FRICTION", 0.02, 20, 100, "SI", "Darcy"), pressure / 1000, 1e-9);
  },
);

published(
  {
    source: "Colebrook (1939), as an equation to be met",
    where: "1/√f = −2 log₁₀(ε/3.7D + 2.51/(Re √f)) from Re 4000 to 1e8",
    seen: "closed form",
    guards: ["PIPE.FRICTION"],
  },
  () => {
    for (const reynolds of [4000, 1e4, 1e5, 1e6, 1e8]) {
      for (const roughness of [0, 1e-6, 1e-4, 1e-2, 0.05]) {
        const x = 1 / Math.sqrt(frictionFactor(reynolds, roughness));
        expectClose(x, -2 * Math.log10(roughness / 3.7 + (2.51 * x) / reynolds), 1e-12);
      }
    }
  },
);

published(
  {
    source: "Darcy–Weisbach with Colebrook, water at 20 °C, roughness 0.0015 mm, by hand",
    where: "1.5 L/s in a 44 mm bore over 100 m: V 0.9865 m/s, Re 43 259, f 0.02170",
    seen: "closed form",
  },
  () => {
    const speed = 0.0015 / ((Math.PI / 4) * 0.044 ** 2);
    const reynolds = (speed * 0.044) / 1.0034e-6;
    let x = 7;
    for (let i = 0; i < 60; i++) {
      x = -2 * Math.log10(0.0015 / 44 / 3.7 + (2.51 * x) / reynolds);
    }
    const pressure = (998.2 * 100 * speed ** 2) / (x ** 2 * 0.044 * 2);
    expectClose(callNumber("PIPE.FRICTION", 5.4, 44, 100, "SI", "Darcy"), pressure / 1000, 1e-9);
    expectWithin(frictionFactor(reynolds, 0.0015 / 44), 1 / x ** 2, 1e-12);
  },
);
