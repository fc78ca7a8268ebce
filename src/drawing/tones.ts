/** Flats of named tones; materials of a room, kept quiet beside cloth. */
const TONES: Readonly<Record<string, string>> = {
  wood: "#8c6a4a",
  "wood-dark": "#4a3a2d",
  metal: "#8f8c86",
  glass: "#e8eef1",
  white: "#f4f4ee",
  ceramic: "#d9d5ca",
  paper: "#ffffff",
};

/** The colour of a named tone; white where there is none of that name. */
export function toneColour(name: string): string {
  return TONES[name] ?? "#ffffff";
}
