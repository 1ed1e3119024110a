import { isPermissive } from "../../build/licences";

test.each(["MIT", "Apache-2.0", "(MIT OR GPL-3.0)", "BSD-3-Clause AND MIT", "0BSD"])(
  "%s may be shipped",
  (licence) => expect(isPermissive(licence)).toBe(true),
);

test.each(["", "GPL-3.0", "MIT AND GPL-3.0", "UNLICENSED", "SEE LICENSE IN LICENSE.md"])(
  '"%s" may not be shipped',
  (licence) => expect(isPermissive(licence)).toBe(false),
);
