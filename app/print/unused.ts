/** Stands in for optional parts of the PDF library that are never used (see vite.config.ts). */
export default undefined
