// What the page file begins with: it unpacks the page's own script and hands it to the browser, which runs it because the
// file's policy names its hash.
import { packedBlock } from "./packed-block";
import { scriptText } from "./trusted-start";
import { unpack } from "./unpack";

const script = document.createElement("script");
script.text = scriptText(new TextDecoder().decode(unpack(packedBlock("script"))));
document.currentScript?.after(script);
