import { plainWords } from "../../src/taskpane/host-errors";
import { Refusal } from "../../src/taskpane/workbook";

const hostError = (code: string, message: string) => Object.assign(new Error(message), { code });

test.each([
  [hostError("InvalidOperationInCellEditMode", "Excel is in cell editing mode."), /Press Enter/],
  [hostError("GeneralException", "The host is in edit mode."), /Press Enter/],
  [hostError("AccessDenied", "You cannot perform the requested operation."), /Enable Editing/],
  [hostError("AccessDenied", "The sheet is protected."), /Unprotect Sheet/],
  [hostError("InvalidArgument", "Something else."), /^Excel says: Something else\.$/],
  [new Refusal("WorkbookProtected"), /structure is protected/],
  [new Refusal("TooLarge"), /more cells than a line has/],
  ["a text", /^Excel says: a text$/],
])("%s in plain words", (error, words) => expect(plainWords(error)).toMatch(words));
