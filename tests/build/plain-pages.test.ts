import { contactLine } from "../../build/plain-pages";

test("the support page names the publisher's contact, where there is one", () => {
  expect(contactLine("", "Ask:")).toBe("");
  expect(contactLine("help@example.org", "Ask:")).toContain('<a href="mailto:help@example.org">');
  expect(contactLine("https://example.org/help?a=1&b=2", "Ask:")).toContain(
    '<a href="https://example.org/help?a=1&amp;b=2">',
  );
});

test.each(["http://example.org", "javascript:alert(1)", "help"])("%s is no contact", (contact) => {
  expect(() => contactLine(contact, "Ask:")).toThrow(/neither a mail address nor an https address/);
});
