/** Words that requests and answers of this resource choose from. */

/** Six coils of six impedances present thousands of loads. */
export const MOST_LOADS_SHOWN = 64
/** Above this, only balanced networks are listed: the number of all networks triples with every coil. */
export const MOST_COILS_LISTED_IN_FULL = 6
