/**
 * The first builds known to take custom functions as lambdas: version 2510 on Windows, 16.102 on the
 * Mac; the web is always current. Build numbers of version 2510 begin at 19328 (from memory).
 */
const WINDOWS_BUILD = 19328;
const MAC_MINOR = 102;

/** Whether a host that says its platform and version ("16.0.19328.20000") is older than those. */
export function isOlderThanLambdas(platform: string, version: string): boolean {
  const parts = version.split(".").map(Number);
  if (platform === "PC") return parts.length >= 3 && parts[2] < WINDOWS_BUILD;
  if (platform === "Mac") return parts.length >= 2 && parts[1] < MAC_MINOR;
  return false;
}
