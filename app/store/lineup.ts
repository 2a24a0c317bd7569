export const lineUp = (_: string) => {}
export const spread = (_: string) => {}
