using PlanService;

// Usage: PlanService [--urls http://127.0.0.1:5080] [--Limits:MaxBytes 65536] [--Limits:Timeout 00:00:10]
PlanApplication.Create(args).Run();
