import type { ProjectData } from "../projectData.ts";
import { listed } from "../words/phrases.ts";

/**
 * Whose cloths these are, for the client: suppliers that the studio discloses, each with the cloths of it that the rooms show. Of all
 * others nothing is said, not even that there are any.
 */
export function sourcesOf(data: ProjectData): string {
  const { suppliers } = data.studio.fields;
  const shown = [...new Set(data.rooms.flatMap((r) => r.scheme.roles.map((role) => role.cloth)))];
  const said = Object.entries(suppliers ?? {}).flatMap(([key, supplier]) => {
    if (supplier.disclose !== true) return [];
    const names = shown.flatMap((id) => {
      const card = data.records.cloths.get(id);
      return card?.fields.supplier === key ? [card.fields.cloth] : [];
    });
    return names.length > 0 ? [`${listed(names)} by ${supplier.name}`] : [];
  });
  return said.length > 0 ? `${said.join("; ")}.` : "";
}
