// How a child rides is asked by the page before it judges anything. Tests that are about other things have it answered here: a
// function for the page, which chooses wherever the choice stands open, for every rider and after every reload.

export const usualStage = "starting";

/** Runs in the page, before or after Saddlerule is there. Choosing takes no focus. */
export function keepStageChosen(stage) {
  const choose = (root) => {
    const ways = [...root.querySelectorAll('input[name="stage"]')];
    if (ways.length > 0 && !ways.some((way) => way.checked)) ways.find((way) => way.value === stage)?.click();
  };
  const watch = (root) => {
    new MutationObserver(() => choose(root)).observe(root, {
      childList: true,
      subtree: true,
      characterData: true,
    });
    choose(root);
  };
  for (const element of document.querySelectorAll("*")) if (element.shadowRoot) watch(element.shadowRoot);
  const attach = Element.prototype.attachShadow;
  Element.prototype.attachShadow = function (...how) {
    const root = attach.apply(this, how);
    watch(root);
    return root;
  };
}
