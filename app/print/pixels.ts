/** Dots an inch of a sheet as a picture: fine enough to print. */
export const PNG_DPI = 200

export const pixelsOf = (mm: number): number => Math.round((mm / 25.4) * PNG_DPI)
