// The page file's script. A file that opens anywhere is one that goes nowhere: its policy forbids it every connection.
import { unreachedSource } from "../engine/list-address";
import { showCarried } from "./carried-page";

showCarried(unreachedSource);
