/* Sets a screen to true size against a bank card (ISO/IEC 7810, ID-1: 85.60 mm wide). Everything can be read without it. */
(() => {
  const CARD_MM = 85.6;
  const KEY = "roomcloth-card-dots";
  const root = document.documentElement;
  const kept = () => {
    try {
      return Number(localStorage.getItem(KEY)) || null;
    } catch {
      return null;
    }
  };
  /* The card's width is kept in dots of the screen itself: it stays true when the page is enlarged. */
  let dots = kept();
  const show = () => {
    if (!dots) return;
    root.style.setProperty("--true-mm", `${dots / devicePixelRatio / CARD_MM}px`);
    for (const words of document.querySelectorAll(".true-size"))
      words.textContent = "At its true size, as this screen is set.";
    for (const slider of document.querySelectorAll(".set-screen input"))
      slider.value = String(dots / devicePixelRatio);
  };
  for (const closeUp of document.querySelectorAll(".close-up")) {
    const set = document.createElement("details");
    set.className = "set-screen";
    set.innerHTML =
      '<summary>Set this screen</summary><p>Hold a bank card against the frame, and move the slider, by hand or with the arrow keys, until the frame is as large as the card.</p><div class="bank-card"></div><label>Size of the card <input type="range" min="160" max="760" step="1" value="324"></label>';
    const slider = set.querySelector("input");
    slider.addEventListener("input", () => {
      dots = Number(slider.value) * devicePixelRatio;
      try {
        localStorage.setItem(KEY, String(dots));
      } catch {
        /* It then lasts as long as the page. */
      }
      show();
    });
    closeUp.querySelector(".true-size")?.after(set);
    /* Whoever moves on with the Tab key leaves it: what has the focus is never behind it. */
    closeUp.addEventListener("focusout", ({ relatedTarget }) => {
      if (relatedTarget && !closeUp.contains(relatedTarget)) closeUp.hidePopover();
    });
  }
  addEventListener("resize", show);
  show();
})();
