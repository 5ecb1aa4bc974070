import { catalogue } from "./catalogue";
import { register } from "./hosts/excel";

register(catalogue);
