/** @customenum {string} */
export enum Units {
  /** feet, inches, psi, gpm */
  US = "US",
  /** meters, millimeters, kPa, m³/h */
  SI = "SI",
}
