import { reachedFromElsewhere } from "../../src/workshop-page/join-code";

test.each([
  ["http://localhost:3000/workshop", false],
  ["http://127.0.0.1:3000/workshop", false],
  ["http://127.1.2.3/workshop", false],
  ["http://[::1]:3000/workshop", false],
  ["file:///home/officer/dist/workshop.html", false],
  ["http://192.168.7.20:3000/workshop", true],
  ["https://example.org/workshop.html", true],
  ["http://localhost.example.org/", true],
])("%s leads a phone to this page: %s", (address, reached) => {
  expect(reachedFromElsewhere(new URL(address))).toBe(reached);
});
