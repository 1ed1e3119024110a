import type { FunctionWords } from "./function-words";
import type { Language } from "./language";
import { formReader, type MessageReader, messageReader } from "./message-reader";
import { translation } from "./translate";

const asItCame: MessageReader = { error: (message) => message, said: (text) => text };

/** What the trial page and the pictures say, in a language. */
export async function screenWordsIn(language: Language): Promise<(text: string) => string> {
  if (language === "en") return (text) => text;
  const [{ screens, screenForms }, { start }] = await Promise.all([
    import("./es/screens"),
    import("./es/start"),
  ]);
  const all = { ...start, ...screens };
  return formReader(screenForms, (text) => translation(text, all));
}

/** What the ready-made workbooks say, in a language. */
export async function workbookWordsIn(language: Language): Promise<(text: string) => string> {
  if (language === "en") return (text) => text;
  return (await import("./es/workbook-say")).sayWorkbook;
}

/** What a workbook needs to put over what the functions say in it; English needs nothing. */
export async function functionWordsIn(language: Language): Promise<FunctionWords | undefined> {
  if (language === "en") return undefined;
  const { verdicts } = await import("./es/messages");
  return { reader: await messagesIn(language), verdicts, say: await workbookWordsIn(language) };
}

/** Reads what the functions say, in a language. The tables are loaded by those who want them alone. */
export async function messagesIn(language: Language): Promise<MessageReader> {
  return language === "en" ? asItCame : messageReader(await import("./es/messages"));
}
