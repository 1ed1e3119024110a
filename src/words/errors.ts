import type { Language } from "./language";
import { type MessageReader, messageReader } from "./message-reader";

const asItCame: MessageReader = { error: (message) => message, said: (text) => text };

/** Reads what the functions say, in a language. The tables are loaded by those who want them alone. */
export async function messagesIn(language: Language): Promise<MessageReader> {
  return language === "en" ? asItCame : messageReader(await import("./es/messages"));
}
