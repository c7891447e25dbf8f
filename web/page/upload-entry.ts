// The script of the page file for a media library: the same, but it may fetch a list from where it was uploaded to.
import { addressSource } from "../engine/list-address";
import { showCarried } from "./carried-page";

showCarried((address) => addressSource(new URL(address, document.baseURI)));
