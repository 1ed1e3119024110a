import { strings } from "./strings";
import { Refusal } from "./workbook";

/**
 * What the user can do about an error, in plain words; the host's own words where this knows none.
 * The host's codes stand in the documentation of its errors; builds differ in which one they give,
 * so that the message is looked at too.
 */
export function plainWords(error: unknown): string {
  const { errors } = strings;
  if (error instanceof Refusal) return errors[error.code];
  const { code = "", message = String(error) } = (error ?? {}) as {
    code?: string;
    message?: string;
  };
  if (code === "InvalidOperationInCellEditMode" || /edit(?:ing)? mode/i.test(message)) {
    return errors.cellEdit;
  }
  if (
    /protected/i.test(code) ||
    /protected (?:sheet|cell|worksheet|workbook)|is protected/i.test(message)
  ) {
    return errors.protectedSheet;
  }
  if (code === "AccessDenied") return errors.accessDenied;
  return strings.hostError(message);
}
