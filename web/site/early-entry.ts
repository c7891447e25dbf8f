// The first script of the site: has the largest file under way while the page's own script still comes.
import { earlyFiles } from "./early-files";

earlyFiles();
