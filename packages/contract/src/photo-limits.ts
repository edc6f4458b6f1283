/** What is taken at most. `characters`: of the picture in base64; `sidePx`: the longest side as kept; `pixels`: before it is made smaller. */
export const PHOTO_LIMITS = { characters: 4_000_000, pixels: 50_000_000, sidePx: 2_048, smallSidePx: 320, ofOneReading: 12 } as const
