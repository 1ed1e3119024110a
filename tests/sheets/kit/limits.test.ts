import { faultOf, limitText } from "../../../src/sheets/kit/limits";

const segments = {
  low: 1,
  high: 60,
  whole: true,
  atMost: { name: "Heads", words: "the number of sprinklers" },
} as const;

function fault(value: string | number | null, heads: number | null): string | undefined {
  return faultOf("Segments", segments, value, (name) => (name === "Heads" ? heads : null));
}

describe("an input that must not exceed another", () => {
  test("says so in words", () => {
    expect(limitText(segments)).toBe(
      "a whole number from 1 to 60, at most the number of sprinklers",
    );
  });

  test("more than the other holds is a fault, as many is none", () => {
    expect(fault(14, 14)).toBeUndefined();
    expect(fault(15, 14)).toBe(
      "Segments must be a whole number from 1 to 60, at most the number of sprinklers; got 15.",
    );
  });

  test("its own limits hold where the other is blank", () => {
    expect(fault(20, null)).toBeUndefined();
    expect(fault(61, null)).toContain("got 61");
    expect(fault(null, 14)).toContain("got a blank");
    expect(fault(7.5, 14)).toContain("got 7.5");
    expect(fault("seven", 14)).toContain("got seven");
  });
});
