/** LATERAL_HEADFLOW is exported as lateralHeadflow: the id's words joined, the first in lower case. */
export function exportNameOf(id: string): string {
  return id.toLowerCase().replace(/_([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}
