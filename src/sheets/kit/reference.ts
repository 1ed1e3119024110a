/**
 * A worksheet's name as it stands before a reference. Always in quotes: bare, a name with a blank or
 * with a digit in front makes the host offer to repair the file.
 */
export function quotedSheet(name: string): string {
  return `'${name.replace(/'/g, "''")}'`;
}

/** A range on a worksheet, that stays where it is: 'Line'!$B$4:$C$9. */
export function absolute(sheet: string, range: string): string {
  return `${quotedSheet(sheet)}!${range.replace(/\$?([A-Z]+)\$?(\d+)/g, "$$$1$$$2")}`;
}
