import { catalogue } from "./catalogue";
import { register } from "./host";

register(catalogue);
