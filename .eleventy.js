import { join } from "node:path";
import { register } from "tsx/esm/api";

// Plain Eleventy makes the pages of content/ in out/, without PDFs; `npm run build` makes everything.
register();
const { checkoutSite } = await import("./src/site/checkoutSite.ts");
const { compute } = await import("./src/site/compute.ts");
const { makePictures } = await import("./src/site/makePictures.ts");

/** Content and layouts of this checkout; a studio elsewhere is built by the roomcloth command. */
export default function (config) {
  config.addPlugin(checkoutSite, {
    contentDir: join(import.meta.dirname, "content"),
    layoutsDir: join(import.meta.dirname, "layouts"),
    compute,
    makePictures,
  });
  return { dir: { input: "content", output: "out" } };
}
