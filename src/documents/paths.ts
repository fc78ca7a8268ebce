/** The client's tree of a project. */
export const clientTree = (project: string): string => `client/${project}`;
/** A maker's tree of a project. */
export const makerTree = (maker: string, project: string): string => `makers/${maker}/${project}`;
/** The studio's folder of a project. */
export const studioTree = (project: string): string => `studio/${project}`;

export const boardPath = (project: string, room: string): string =>
  `${clientTree(project)}/${room}/index.html`;
export const proposalPath = (project: string): string => `${clientTree(project)}/proposal.html`;
export const mailPath = (project: string): string => `${clientTree(project)}/proposal-to-send.html`;
export const clientIndexPath = (project: string): string => `${clientTree(project)}/index.html`;
export const sheetPath = (maker: string, project: string, room: string): string =>
  `${makerTree(maker, project)}/${room}.html`;
/** The fitter's sheet of a room; in a folder, so that no room's own sheet can have its name. */
export const fittingPath = (maker: string, project: string, room: string): string =>
  `${makerTree(maker, project)}/${room}/fitting.html`;
export const ordersPath = (project: string): string => `${studioTree(project)}/orders.html`;
/** The letter that orders from one supplier; in a folder, so that no other document can have its name. */
export const orderLetterPath = (project: string, supplier: string): string =>
  `${studioTree(project)}/orders/${supplier}.html`;
/** The letter that asks one supplier for samples. */
export const sampleLetterPath = (project: string, supplier: string): string =>
  `${studioTree(project)}/samples/${supplier}.html`;
export const findingsPath = (project: string): string => `${studioTree(project)}/findings.html`;
export const schedulePath = (project: string): string => `${studioTree(project)}/schedule.html`;
export const receivingPath = (project: string): string => `${studioTree(project)}/receiving.html`;
export const accountPath = (project: string): string => `${studioTree(project)}/account.html`;
export const samplesPath = (project: string): string => `${studioTree(project)}/samples.html`;
export const pocketPath = (project: string): string => `${studioTree(project)}/pocket.html`;
export const STUDIO_INDEX = "studio/index.html";
