import { chosenLanguage } from "../words/chosen";
import { paneWords } from "../words/words";

/** The pane's words, in the language that it was opened in. */
export const strings = paneWords[chosenLanguage()];
