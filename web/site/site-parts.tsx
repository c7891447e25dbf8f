// What the site adds to the page: that it opens without a signal, the way to the home screen, and a newer version.
import { useEffect, useState } from "preact/hooks";
import { usePage } from "../page/page-context";
import type { SiteParts } from "../page/page-context";
import { createStore } from "../state/store";
import { watchHomeScreen } from "./home-screen";
import type { HomeScreen } from "./home-screen";
import { watchVersions } from "./new-version";
import type { Versions } from "./new-version";

interface SiteState {
  versions: Versions;
  home: HomeScreen;
  /** The reader goes on with this version for now. */
  putOff: boolean;
}

const site = createStore<SiteState>({
  versions: { kept: null, openNewer: null },
  home: { ask: null, byShareMenu: false, there: false },
  putOff: false,
});

/** Listens from now on. */
export function watchSite(): void {
  watchHomeScreen((home) => site.change((state) => ({ ...state, home })));
}

/** Keeps the site for later: from when its reader has the page, for it fetches every file. */
export function keepSite(): void {
  watchVersions((versions) => site.change((state) => ({ ...state, versions })));
}

function useSite(): SiteState {
  const [state, set] = useState(site.read());
  useEffect(() => {
    set(site.read());
    return site.subscribe(set);
  }, []);
  return state;
}

function NewVersionStrip() {
  const { texts } = usePage();
  const { versions, putOff } = useSite();
  const open = putOff ? null : versions.openNewer;
  return (
    <>
      <p class="aloud" role="status">
        {open !== null && texts.site.newVersion}
      </p>
      {open !== null && (
        <div class="opening-strip version-strip">
          <p>
            <strong>{texts.site.newVersion}</strong> {texts.site.newVersionWhat}
          </p>
          <div>
            <button type="button" class="button main" onClick={open}>
              {texts.site.openIt}
            </button>
            <button
              type="button"
              class="button"
              onClick={() => site.change((state) => ({ ...state, putOff: true }))}
            >
              {texts.site.later}
            </button>
          </div>
        </div>
      )}
    </>
  );
}

function WithoutSignal() {
  const { texts } = usePage();
  const { versions, home } = useSite();
  const said = { true: texts.site.kept, false: texts.site.notKept, null: texts.site.keeping };
  return (
    <section class="sheet stack">
      <h3>{texts.site.title}</h3>
      <p role="status">{said[`${versions.kept}`]}</p>
      {home.ask !== null && (
        <button type="button" class="button main wide" onClick={home.ask}>
          {texts.site.toHomeScreen}
        </button>
      )}
      {home.byShareMenu && <p>{texts.site.byShareMenu}</p>}
    </section>
  );
}

export const siteParts: SiteParts = { strip: NewVersionStrip, kept: WithoutSignal };
