// How a child rides is asked by the page before it judges anything. Tests that are about other things have it answered here: a
// function for the page, which chooses wherever the choice is open, for every rider and after every reload.

export const usualStage = "starting";

/**
 * Runs in the page, before or after Saddlerule is there. Choosing takes no focus. In a tab that was here before, what is kept on
 * the device comes first: a choice made before it is there would be a change that the page may not throw away.
 */
export function keepStageChosen(stage) {
  // A tab keeps its name from page to page, and a new one has none.
  let mayChoose = window.name === "";
  window.name ||= "stage chosen";
  const waiting = [];
  const choose = (root) => {
    const ways = [...root.querySelectorAll('input[name="stage"]')];
    if (mayChoose && !ways.some((way) => way.checked)) ways.find((way) => way.value === stage)?.click();
  };
  const chooseFromNow = () => {
    mayChoose = true;
    waiting.splice(0).forEach((root) => choose(root));
  };
  const watch = (root) => {
    if (!mayChoose) waiting.push(root);
    new MutationObserver(() => choose(root)).observe(root, {
      childList: true,
      subtree: true,
      characterData: true,
    });
    choose(root);
  };
  if (!mayChoose) {
    // The page closes the device's room once it has read it, and then shows what was there. Where nothing was, it is an error.
    const { open } = IDBFactory.prototype;
    const { close } = IDBDatabase.prototype;
    IDBDatabase.prototype.close = function () {
      close.call(this);
      setTimeout(chooseFromNow);
    };
    IDBFactory.prototype.open = function (...what) {
      const opening = open.apply(this, what);
      opening.addEventListener("error", () => setTimeout(chooseFromNow));
      return opening;
    };
    addEventListener("input", () => setTimeout(chooseFromNow), { capture: true, once: true });
  }
  for (const element of document.querySelectorAll("*")) if (element.shadowRoot) watch(element.shadowRoot);
  const attach = Element.prototype.attachShadow;
  Element.prototype.attachShadow = function (...how) {
    const root = attach.apply(this, how);
    watch(root);
    return root;
  };
}
