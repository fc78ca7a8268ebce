/* Looks for what stands in the studio's projects. Without a script the index is read as it stands. */
(() => {
  const form = document.querySelector("form.search");
  const data = document.getElementById("search-entries");
  if (!form || !data || typeof MiniSearch === "undefined") return;
  const MOST = 30;
  const entries = JSON.parse(data.textContent);
  const index = new MiniSearch({
    fields: ["title", "where", "words"],
    processTerm: (term) => term.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase(),
    searchOptions: {
      boost: { title: 3 },
      prefix: true,
      fuzzy: (term) => (term.length > 4 ? 0.2 : false),
      combineWith: "AND",
    },
  });
  index.addAll(entries);
  const [input, told, list] = ["input", "output", "ul"].map((name) => form.querySelector(name));
  const item = ({ href, title, where }) => {
    const li = document.createElement("li");
    const link = document.createElement("a");
    const place = document.createElement("span");
    link.href = href;
    link.textContent = title;
    place.textContent = where;
    li.append(link, place);
    return li;
  };
  input.addEventListener("input", () => {
    const asked = input.value.trim();
    const found = asked === "" ? [] : index.search(asked);
    list.replaceChildren(...found.slice(0, MOST).map(({ id }) => item(entries[id])));
    const more = found.length > MOST ? `, of which ${MOST} are shown` : "";
    told.textContent = asked === "" ? "" : found.length === 0 ? "Nothing is found." : `${found.length} found${more}.`;
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  form.hidden = false;
})();
