import "./pane.css";
import { functionList } from "./functionList";

document.getElementById("pane")?.append(functionList());
