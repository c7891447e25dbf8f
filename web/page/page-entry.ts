// The page file's script: Saddlerule with its engine, in the one element that the file has for it.
import engineBytes from "engine-wasm";
import { mountSaddlerule } from "./mount-saddlerule";

const host = document.getElementById("saddlerule");
if (host !== null) mountSaddlerule(host, { engineBytes });
