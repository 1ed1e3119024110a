import { screenSaid } from "../../words/spoken";

/** A sentence with places in braces, and what stands in them. */
export interface Sentence {
  readonly form: string;
  readonly places: Readonly<Record<string, string>>;
}

export function sentence(form: string, places: Sentence["places"] = {}): Sentence {
  return { form, places };
}

/** In the page's language; what stands in the places is said already. */
export function said({ form, places }: Sentence): string {
  return screenSaid(form).replace(/\{(\w+)\}/g, (whole, place: string) => places[place] ?? whole);
}
