import type { ItemData, ProjectData } from "../projectData.ts";

/** Whether a maker of the studio fits: `makes` names the work. */
export function isFitter({ studio }: Pick<ProjectData, "studio">, maker: string | null): boolean {
  const card = maker === null ? undefined : studio.fields.makers?.[maker];
  return card?.makes.includes("fitting") ?? false;
}

/** Who puts an item up: its own maker, who may fit too, else the first of the studio's makers who fits; null where nobody does. */
export function fitterOf(data: Pick<ProjectData, "studio">, { maker }: ItemData): string | null {
  if (isFitter(data, maker)) return maker;
  const makers = Object.keys(data.studio.fields.makers ?? {});
  return makers.find((each) => isFitter(data, each)) ?? null;
}
