import { InvalidInput, NoAnswer } from "../../src/ground/domain-error";

test("errors carry their name and their message", () => {
  expect(String(new InvalidInput("too long"))).toBe("InvalidInput: too long");
  expect(String(new NoAnswer("none fits"))).toBe("NoAnswer: none fits");
});
