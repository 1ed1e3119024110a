import type { Reference } from "../reference";
import type { FunctionHost } from "../screen/host";
import type { HostState } from "./workbook";

/** What every view of the pane gets. */
export interface Pane {
  readonly reference: Reference;
  readonly functions: FunctionHost;
  readonly host: HostState;
  /** Says something where a screen reader hears it; what was said before goes. */
  say(message: HTMLElement): void;
  quiet(): void;
  /** Runs a step that talks to the host and shows the host's own error if it throws one. */
  attempt(step: () => Promise<void>): Promise<void>;
}
