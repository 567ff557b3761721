/** Round cups of the trade want a hole of about this size; common practice, no source [m]. */
export const USUAL_CUP_M = 76e-3
/** What such a cup takes of the air [m³]. */
export const USUAL_CUP_M3 = 0.1e-3
