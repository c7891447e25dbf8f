// Ways to the home screen: the browser's own question where it has one, its share menu on an iPhone or iPad.

export interface HomeScreen {
  /** Lets the browser ask its reader; null where it does not offer that, or no more. */
  ask: (() => void) | null;
  /** Where only the browser's share menu does it. */
  byShareMenu: boolean;
  /** The page is there already, and was opened from there. */
  there: boolean;
}

/** As Chromium has it (https://www.w3.org/TR/manifest-app-info/ leaves it to browsers); the compiler does not know it. */
interface InstallPrompt extends Event {
  prompt: () => Promise<unknown>;
}

/** Tells of every change, and at once. */
export function watchHomeScreen(told: (state: HomeScreen) => void): void {
  // Apple's browsers alone have this, and no other way in.
  const standalone = (navigator as { standalone?: boolean }).standalone;
  const there = matchMedia("(display-mode: standalone)").matches || standalone === true;
  const now: HomeScreen = { ask: null, byShareMenu: standalone === false && !there, there };
  const tell = (ask: HomeScreen["ask"]): void => told({ ...now, ask });
  tell(null);
  addEventListener("beforeinstallprompt", (event) => {
    event.preventDefault();
    tell(() => {
      // Each may ask once.
      tell(null);
      void (event as InstallPrompt).prompt();
    });
  });
  addEventListener("appinstalled", () => tell(null));
}
