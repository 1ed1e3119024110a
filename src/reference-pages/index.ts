import "./style.css";
import type { FunctionHelp, Reference } from "../reference";
import { startSearch } from "./search";
import { startExample } from "./try-it";

/** One script for every reference page: the list gets its search, a function's page its example. */
async function start(): Promise<void> {
  const functionHelp = document.getElementById("function-help");
  if (functionHelp !== null) {
    await startExample(JSON.parse(functionHelp.textContent ?? "") as FunctionHelp);
    return;
  }
  if (document.getElementById("search") === null) return;
  const response = await fetch("../reference.json");
  if (response.ok) startSearch(((await response.json()) as Reference).functions);
}

void start();
