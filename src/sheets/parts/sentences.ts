/** Columns beyond value and unit that a check's sentence may take. */
export const SENTENCE_COLUMNS = 6;

/** What to say of a set that does not fit the day: nothing else follows from it. */
export const SET_TOO_LONG =
  '"A set of "&FIXED(SetHours, 1)&" hours and its move of "&FIXED(MoveHours, 2)&" do not fit a day of "&FIXED(DayHours, 1)&" hours: shorten the set, or lengthen the day."';

/** For what follows from the set: said once, by the check of the set itself. */
export const WAITS_FOR_SET = '"Not judged: the set does not fit the day."';
