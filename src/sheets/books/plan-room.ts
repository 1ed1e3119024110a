/** Rows of the best plans, and rows kept for larger fields; a check says when they do not do. */
export const PLANS = 5;
export const MOST_RUNS = 50;
export const MOST_HEADS = 500;
export const MOST_HYDRANTS = 12;
export const MOST_LIMITS = 20;
export const MOST_CORNERS = 12;
