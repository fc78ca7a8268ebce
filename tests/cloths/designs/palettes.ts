/** The dyes of the two rooms' cloths, each set drawn from the room's anchor. */

/** From the tiled stove: bottle green, honey, russet, cream. */
export const stove = {
  bottle: "#2f5446",
  fern: "#5f7f5c",
  lichen: "#9dad88",
  honey: "#d19c45",
  straw: "#e8c985",
  russet: "#9b4529",
  brick: "#c4714c",
  shell: "#e6b491",
  cream: "#efe4cb",
  flax: "#d8c5a5",
  ink: "#22332b",
  umber: "#562a1c",
  fawn: "#a9805a",
} as const;

/** From the harbour picture: ink blue, clay, straw, chalk. */
export const harbour = {
  ink: "#263f5c",
  tide: "#5c7d9a",
  mist: "#a9bcc6",
  clay: "#c0735a",
  blush: "#e2b29b",
  straw: "#d8b872",
  chalk: "#eee8da",
  weed: "#7d8a76",
  slate: "#5d6f7c",
  peat: "#3c3a38",
} as const;
