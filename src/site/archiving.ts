import { type ContentPaths, filesOf } from "../archive/filesOf.ts";
import { recordJson } from "../archive/record/recordJson.ts";
import { recordText } from "../archive/record/recordText.ts";
import type { ProjectData } from "../documents/projectData.ts";
import type { Archiving, Report } from "./computed.ts";

/** What is kept of a project that was worked out. */
export function archivingOf(
  data: ProjectData,
  content: ContentPaths,
  on: string,
  money: Report,
  quantities: Report,
): Archiving {
  const { project, studio } = data;
  const { fields } = project;
  return {
    project: project.id,
    name: fields.project,
    studio: studio.fields.studio,
    revision: fields.revision ?? null,
    status: fields.status,
    statusPlace: project.place(["status"]),
    on,
    files: filesOf(project.id, data.records, content),
    record: (program) => ({
      text: recordText({
        data,
        on,
        program,
        moneyText: money.text,
        quantitiesText: quantities.text,
      }),
      json: recordJson({ data, on, program, money: money.json, quantities: quantities.json }),
    }),
  };
}
