import type { ProjectRecord } from "./records.ts";
import { PROJECT_STATES } from "./schema/projectSchema.ts";

/** True where the project's status is this one or a later one. */
export function hasReached(
  project: ProjectRecord,
  state: (typeof PROJECT_STATES)[number],
): boolean {
  return PROJECT_STATES.indexOf(project.fields.status) >= PROJECT_STATES.indexOf(state);
}

/** True from the fitting on: then nothing is late any more, the account is the last one, and the project can be archived. */
export const isFitted = (project: ProjectRecord): boolean => hasReached(project, "fitted");
