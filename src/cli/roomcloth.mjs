#!/usr/bin/env node
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { bundled } from "./bundle.mjs";

// The program is TypeScript without a build step: its sources are gathered when they have changed, or else read one by one by tsx.
const entry = await bundled(join(import.meta.dirname, "..", ".."));
if (entry === null) (await import("tsx/esm/api")).register();
const { start } = await import(entry ? pathToFileURL(entry).href : "./start.ts");
await start();
