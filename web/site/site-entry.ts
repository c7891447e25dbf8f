// The site's script: Saddlerule with its engine and words in files beside it, and a service worker that keeps them.
import { tagAddresses } from "../embedding/tag-address";
import { engineOpener } from "../engine/engine-opening";
import { addressSource } from "../engine/list-address";
import { mountPage } from "../page/mount-page";
import { servedEngine, servedSettings, servedWords } from "./served-files";
import { siteSamples } from "./site-samples";
import { keepSite, siteParts, watchSite } from "./site-parts";

async function start(): Promise<void> {
  watchSite();
  // On its way while the settings are read.
  const engine = servedEngine();
  mountPage({
    engines: engineOpener(engine),
    packedWords: servedWords,
    samples: siteSamples,
    listAt: (address) => addressSource(new URL(address, document.baseURI)),
    usually: await servedSettings(),
    site: siteParts,
    tagAddresses: tagAddresses(["list", "currency"]),
  });
  // Keeping the site fetches every file: the page itself comes first.
  engine.compiled().then(keepSite, keepSite);
}

void start();
