import { switchedTree } from "../../site/treeOf.ts";

/** A made file and whose it is; null is the studio as a whole. */
export interface MadeFile {
  /** Path below `out/`, with forward slashes. */
  readonly path: string;
  readonly project: string | null;
}

/** What an output folder holds of ours: a folder that is switched as one, or a file beside them. */
export interface Unit {
  readonly path: string;
  readonly project: string | null;
}

/** All that changes for one project (or the studio as a whole); it is done wholly or not at all. */
export interface Group {
  readonly project: string | null;
  readonly put: readonly string[];
  readonly remove: readonly string[];
}

/** Which owners a build speaks for. What it does not speak for stays as it is. */
export interface Scope {
  /** Projects that were built, whose old units go where they were not made again. */
  readonly built: ReadonlySet<string | null>;
  /** Projects that exist, built or not; units of all others go. Null: none goes. */
  readonly existing: ReadonlySet<string> | null;
}

/** The units that a list of files makes, sorted by path. Throws where two owners share one. */
export function unitsOf(files: readonly MadeFile[]): readonly Unit[] {
  const units = new Map<string, string | null>();
  for (const { path, project } of files) {
    const unit = switchedTree(path) ?? path;
    if (units.has(unit) && units.get(unit) !== project) {
      throw new Error(`${unit} belongs to two projects`);
    }
    units.set(unit, project);
  }
  return [...units].map(([path, project]) => ({ path, project })).sort(byPath);
}

/**
 * What must be put in place and removed, a group for each owner: the studio first (its index then
 * never names less than there is), then projects by name.
 */
export function switchPlan(
  made: readonly Unit[],
  owned: readonly Unit[],
  scope: Scope,
): readonly Group[] {
  const paths = new Set(made.map((unit) => unit.path));
  const gone = owned.filter(({ path, project }) => {
    if (paths.has(path)) return false;
    if (scope.built.has(project)) return true;
    return project !== null && scope.existing !== null && !scope.existing.has(project);
  });
  const owners = [...new Set([...made, ...gone].map((unit) => unit.project))].sort((a, b) =>
    a === b ? 0 : a === null ? -1 : b === null ? 1 : a < b ? -1 : 1,
  );
  const of = (units: readonly Unit[], owner: string | null): string[] =>
    units.filter((unit) => unit.project === owner).map((unit) => unit.path);
  return owners.map((project) => ({ project, put: of(made, project), remove: of(gone, project) }));
}

/** What is ours after the groups are done. */
export function ownedAfter(owned: readonly Unit[], groups: readonly Group[]): readonly Unit[] {
  const touched = new Set(groups.flatMap((group) => [...group.put, ...group.remove]));
  return [
    ...owned.filter((unit) => !touched.has(unit.path)),
    ...groups.flatMap(({ project, put }) => put.map((path) => ({ path, project }))),
  ].sort(byPath);
}

function byPath(a: Unit, b: Unit): number {
  return a.path < b.path ? -1 : 1;
}
