import { albumStoreContract } from "../album-store.contract.ts";
import { boardStoreContract } from "../board-store.contract.ts";
import { jobStoreContract } from "../job-store.contract.ts";
import { stockStoreContract } from "../stock-store.contract.ts";
import { MemoryJobStore } from "./memory-job-store.ts";

albumStoreContract("the memory store", (clock) => new MemoryJobStore(clock));
boardStoreContract("the memory store", (clock) => new MemoryJobStore(clock));
jobStoreContract("the memory store", (clock) => new MemoryJobStore(clock));
stockStoreContract("the memory store", (clock) => new MemoryJobStore(clock));
