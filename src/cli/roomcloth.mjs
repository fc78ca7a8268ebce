#!/usr/bin/env node
import { register } from "tsx/esm/api";

// The program is TypeScript without a build step; tsx reads it as it is.
register();
const { start } = await import("./start.ts");
await start();
