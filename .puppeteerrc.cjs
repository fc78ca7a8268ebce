// The print browser comes inside an npm package or from the machine (see src/press), so puppeteer fetches none.
module.exports = { skipDownload: true };
