import { once } from "node:events";
import { shared } from "./started-office";

/** Ends the office that was started for all tests. */
export default async function end(): Promise<void> {
  if (shared.office === undefined) return;
  const ended = once(shared.office, "exit");
  shared.office.stdin.end();
  await ended;
}
