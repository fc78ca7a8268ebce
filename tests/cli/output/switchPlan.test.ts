import { expect, test } from "vitest";
import { ownedAfter, switchPlan, unitsOf } from "../../../src/cli/output/switchPlan.ts";

const unit = (path: string, project: string | null) => ({ path, project });

test("files gather into the folders that are switched as one; files beside them stand alone", () => {
  const units = unitsOf([
    { path: "client/quay/den/index.html", project: "quay" },
    { path: "client/quay/den/index.pdf", project: "quay" },
    { path: "makers/workroom/quay/den.html", project: "quay" },
    { path: "studio/quay/findings.html", project: "quay" },
    { path: "studio/index.html", project: null },
    { path: "studio/assets/a.css", project: null },
  ]);
  expect(units).toEqual([
    unit("client/quay", "quay"),
    unit("makers/workroom/quay", "quay"),
    unit("studio/assets", null),
    unit("studio/index.html", null),
    unit("studio/quay", "quay"),
  ]);
});

test("a folder of two projects is a mistake of ours", () => {
  const files = [
    { path: "client/quay/a.html", project: "quay" },
    { path: "client/quay/b.html", project: "mill" },
  ];
  expect(() => unitsOf(files)).toThrow("two projects");
});

const owned = [
  unit("client/mill", "mill"),
  unit("client/quay", "quay"),
  unit("makers/old/quay", "quay"),
  unit("studio/index.html", null),
];

test("what a built project no longer makes goes; another project stays as it is", () => {
  const scope = { built: new Set(["quay"]), existing: new Set(["quay", "mill"]) };
  const groups = switchPlan([unit("client/quay", "quay")], owned, scope);
  expect(groups).toEqual([{ project: "quay", put: ["client/quay"], remove: ["makers/old/quay"] }]);
  expect(ownedAfter(owned, groups)).toEqual([
    unit("client/mill", "mill"),
    unit("client/quay", "quay"),
    unit("studio/index.html", null),
  ]);
});

test("a project that no longer exists goes wholly; where that is not known, nothing goes", () => {
  const built = new Set<string | null>([null]);
  expect(switchPlan([], owned, { built, existing: new Set(["quay"]) })).toEqual([
    { project: null, put: [], remove: ["studio/index.html"] },
    { project: "mill", put: [], remove: ["client/mill"] },
  ]);
  expect(switchPlan([], owned, { built: new Set(), existing: null })).toEqual([]);
});
