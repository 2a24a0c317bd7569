/** CSS px per millimetre at zoom 1. */
export const PX = 4
