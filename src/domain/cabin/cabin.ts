/** The car around the seat: what a caller may say of it, and what the model makes of that. */

